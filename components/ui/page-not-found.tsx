import { LinkButton } from './link-button';
import { PageHeader } from './page-header';
import { routes } from '@/lib/routes';

/** Not there and not yours look the same, on purpose. */
export function PageNotFound() {
  return (
    <>
      <PageHeader
        title="Nothing at this spot"
        lead="There is no such page, or it is not one that you can open."
      />
      <div className="max-w-measure space-y-4">
        <p>
          A link may be old, or mistyped, or belong to another class. If you were signed in, your
          time may have run out: sign in again, and what you had saved is there.
        </p>
        <div className="flex flex-wrap gap-2">
          <LinkButton href={routes.home()} variant="primary">
            To the start
          </LinkButton>
          <LinkButton href={routes.signIn.student()}>Sign in</LinkButton>
        </div>
      </div>
    </>
  );
}
