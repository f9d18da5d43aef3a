const parts = [
  ['pairs', 'Pairs'],
  ['show', 'What to show'],
  ['evening', 'Dusk and Moon'],
  ['fortnight', 'Two weeks'],
] as const;

/** A link for a thumb in the dark. */
export const jumpLook =
  'flex min-h-11 items-center justify-center rounded-md border border-strong px-2 text-accent';

/** On a phone outside: past the form to what is wanted, with a thumb. */
export function OnThisPage() {
  return (
    <nav aria-label="On this page" className="no-print mb-4 sm:hidden">
      <ul className="grid grid-cols-2 gap-2">
        {parts.map(([id, words]) => (
          <li key={id}>
            <a href={`#${id}`} className={jumpLook}>
              {words}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
