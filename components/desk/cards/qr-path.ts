import { create } from 'qrcode';

/** The quiet zone around the pattern, in modules (ISO/IEC 18004 asks for four, from memory). */
const quiet = 4;

/** A QR code as one path of an SVG, in modules; `size` is the side of the square with its quiet zone. */
export function qrPath(text: string): { size: number; path: string } {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  const squares: string[] = [];
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column) === 0) continue;
      squares.push(`M${String(column + quiet)} ${String(row + quiet)}h1v1h-1z`);
    }
  }
  return { size: modules.size + 2 * quiet, path: squares.join('') };
}
