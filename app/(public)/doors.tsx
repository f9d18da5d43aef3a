import type { ReactNode } from 'react';
import { LinkButton } from '@/components/ui/link-button';
import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';

/** One way in for each of the three people who come here. */
export function Doors() {
  return (
    <section aria-labelledby="doors" className="mt-12">
      <h2 id="doors" className="sr-only">
        Where to go from here
      </h2>
      <div className="grid gap-y-10 lg:grid-cols-3 lg:divide-x lg:divide-line">
        <Door
          who="I am in a class"
          way={<LinkButton href={routes.signIn.student()}>Sign in with your card</LinkButton>}
        >
          <p>
            Your teacher gave you a card with a class code, a number and three words. That is all it
            takes: no email, no password to invent.
          </p>
        </Door>
        <Door
          who="I teach"
          way={<LinkButton href={routes.signIn.teacher()}>Sign in to your desk</LinkButton>}
        >
          <p>
            Set lessons, questions and labs for your town and your telescope. See what each student
            did, what would have been best, and why; then plan the night. Sign-off stays where it
            belongs: at the telescope.
          </p>
        </Door>
        <Door
          who="I am just looking"
          way={<LinkButton href={routes.labs.all()}>See the labs</LinkButton>}
        >
          <p>
            Every lab is open to you: put a telescope together, level and balance it, find two good
            alignment stars, align, or rehearse a whole evening.{' '}
            <TextLink href={routes.lessons.all()}>Twelve lessons</TextLink> lead there from the
            closed case.
          </p>
        </Door>
      </div>
    </section>
  );
}

function Door({ who, way, children }: { who: string; way: ReactNode; children: ReactNode }) {
  return (
    <div className="flex flex-col items-start gap-3 lg:px-7 lg:first:ps-0 lg:last:pe-0">
      <h3 className="text-xl font-[560]">{who}</h3>
      <div className="max-w-measure grow text-soft">{children}</div>
      {way}
    </div>
  );
}
