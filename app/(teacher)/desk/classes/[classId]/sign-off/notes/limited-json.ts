/** The body as JSON; null when it is none, 'too-long' once it has more than `mostBytes`: no more is read. */
export async function limitedJson(request: Request, mostBytes: number): Promise<unknown> {
  const reader = request.body?.getReader();
  if (reader === undefined) return null;
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      bytes += value.byteLength;
      if (bytes > mostBytes) {
        await reader.cancel();
        return 'too-long';
      }
      text += decoder.decode(value, { stream: true });
    }
    return JSON.parse(text + decoder.decode());
  } catch {
    // Broken off on the way, or no JSON.
    return null;
  }
}
