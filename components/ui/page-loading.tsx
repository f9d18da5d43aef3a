/** The shape of a page while its facts are fetched: a title, a bench, a few lines. Nothing jumps. */
export function PageLoading() {
  return (
    <div>
      <p role="status" className="sr-only">
        Loading the page
      </p>
      <div aria-hidden="true" className="animate-pulse">
        <div className="h-9 w-full max-w-72 bg-sunken" />
        <div className="mt-3 h-4 w-full max-w-112 bg-sunken" />
        <div className="bench-edge mt-5" />
        <div className="mt-8 space-y-3">
          <div className="h-4 w-full max-w-measure bg-sunken" />
          <div className="h-4 w-11/12 max-w-measure bg-sunken" />
          <div className="h-4 w-3/5 max-w-measure bg-sunken" />
        </div>
      </div>
    </div>
  );
}
