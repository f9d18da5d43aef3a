/** The mark: a bench, its edge, and a low star with its light on the wood. Drawn in the text's colour. */
export function Mark({ className }: { className?: string }) {
  return (
    <svg viewBox="0 0 32 24" aria-hidden="true" className={className} fill="currentColor">
      <path d="M20.5 1.5 21.8 7.7 28 9 21.8 10.3 20.5 16.5 19.2 10.3 13 9 19.2 7.7Z" />
      <path d="M1 17.5h30v2H1z" />
      <path d="M4.5 19.5h2v4h-2zM25.5 19.5h2v4h-2z" />
    </svg>
  );
}
