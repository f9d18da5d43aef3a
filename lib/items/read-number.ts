/** "12,5°" → 12.5, "−3" → −3; null when it is no number. A unit of ours may stand behind it. */
export function readNumber(answer: string): number | null {
  const plain = answer
    .trim()
    .replace(
      /\s*(°|′|″|×|degrees?|deg|arcmin(utes)?|%|fists?|hours?|h|minutes?|min|mm|cm|m|kg|g|volts?|v|amps?|a|times)$/i,
      '',
    )
    .replace('−', '-')
    .replace(',', '.');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  return Number(plain);
}
