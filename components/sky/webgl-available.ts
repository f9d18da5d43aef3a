/** Whether this browser can draw the scene at all. Asked once a page. */
let answer: boolean | null = null;

export function webglAvailable(): boolean {
  if (answer !== null) return answer;
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    answer = context !== null;
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  } catch {
    answer = false;
  }
  return answer;
}
