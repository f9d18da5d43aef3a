import { LinkButton } from '@/components/ui/link-button';
import { routes } from '@/lib/routes';

type Neighbour = { slug: string; title: string };
type LessonNeighboursProps = {
  slug: string;
  lab: { address: string; title: string };
  previous: Neighbour | null;
  next: Neighbour | null;
};

/** Where to go from here: practice first, then the lessons before and after. */
export function LessonNeighbours({ slug, lab, previous, next }: LessonNeighboursProps) {
  return (
    <nav aria-label="After this lesson" className="no-print my-8 flex flex-wrap gap-3">
      <LinkButton href={lab.address} variant="primary" size="large">
        To the lab: {lab.title}
      </LinkButton>
      <LinkButton href={routes.lessons.practise(slug)} size="large">
        Practise until it holds
      </LinkButton>
      {previous === null ? null : (
        <LinkButton href={routes.lessons.one(previous.slug)}>Before: {previous.title}</LinkButton>
      )}
      {next === null ? null : (
        <LinkButton href={routes.lessons.one(next.slug)}>Next: {next.title}</LinkButton>
      )}
    </nav>
  );
}
