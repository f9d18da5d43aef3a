import { LinkButton } from '@/components/ui/link-button';
import { routes } from '@/lib/routes';

type Neighbour = { slug: string; title: string };

/** Where to go from here: practice first, then the lessons before and after. */
export function LessonNeighbours(props: { previous: Neighbour | null; next: Neighbour | null }) {
  return (
    <nav aria-label="After this lesson" className="no-print my-8 flex flex-wrap gap-3">
      <LinkButton href={routes.labs.pickThePair()} variant="primary" size="large">
        Practise on a sky of your own
      </LinkButton>
      {props.previous === null ? null : (
        <LinkButton href={routes.lessons.one(props.previous.slug)}>
          Before: {props.previous.title}
        </LinkButton>
      )}
      {props.next === null ? null : (
        <LinkButton href={routes.lessons.one(props.next.slug)}>Next: {props.next.title}</LinkButton>
      )}
    </nav>
  );
}
