/** A sample card, so that everybody finds the three things on the real one. */
export function CardPicture() {
  return (
    <figure>
      <div className="max-w-sm -rotate-1 border border-strong bg-panel px-5 pt-4 pb-5 shadow-[3px_3px_0_var(--line)] motion-reduce:rotate-0">
        <p className="flex items-baseline justify-between gap-4 border-b-2 border-strong pb-1.5 text-sm">
          <span className="font-semibold">Your name</span>
          <span className="text-soft">your class</span>
        </p>
        <dl className="mt-3 grid grid-cols-[auto_1fr] items-baseline gap-x-5 gap-y-1.5 text-sm">
          <dt className="text-soft">Class code</dt>
          <dd className="font-figures text-lg font-semibold tracking-[0.08em]">ABCD-2345</dd>
          <dt className="text-soft">Card number</dt>
          <dd className="font-figures text-lg font-semibold">7</dd>
          <dt className="text-soft">Three words</dt>
          <dd className="text-lg font-semibold">apple river stone</dd>
        </dl>
      </div>
      <figcaption className="mt-3 text-sm text-soft">
        What a card looks like. Yours has its own code, number and words.
      </figcaption>
    </figure>
  );
}
