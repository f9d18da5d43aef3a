import { ArrowRight } from 'lucide-react';
import { LinkButton } from '@/components/ui/link-button';
import { Meter } from '@/components/ui/meter';
import { SunCaution } from '@/components/ui/sun-caution';
import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';
import { Doors } from './doors';
import { DuskDrawing, drawnStars } from './dusk-drawing';
import { drawnPair } from './drawn-pair';

const inWords = (separationDeg: number) => `${Math.round(separationDeg)}° apart`;
const ofHundred = (hitRate: number) => Math.round(hitRate * 100);

export default function FrontPage() {
  const far = drawnPair(drawnStars.first, drawnStars.far);
  const close = drawnPair(drawnStars.first, drawnStars.close);
  return (
    <>
      <section className="on-sky relative left-1/2 -mt-6 w-screen -translate-x-1/2 overflow-hidden sm:-mt-8 lg:min-h-[min(46vw,38rem)]">
        <div className="relative z-1 mx-auto max-w-[76rem] px-4 pt-10 sm:px-6 lg:pt-14">
          <h1 className="max-w-[20ch] text-4xl font-[520] tracking-[-0.018em] sm:text-5xl">
            Set up the telescope indoors first.
          </h1>
          <p className="mt-4 max-w-[27rem] text-lg text-on-sky">
            Clear evenings are few. On the cloudy ones a class learns here to choose and find its
            alignment stars, on the sky of its own town, and the teacher sees who is ready.
          </p>
          <div className="mt-6 flex max-w-[27rem] flex-col items-start gap-2">
            <LinkButton href={routes.labs.pickThePair()} variant="primary" size="large">
              Try a lab now
              <ArrowRight aria-hidden="true" className="size-5" />
            </LinkButton>
            <p className="text-sm text-on-sky-soft">No account. Nothing about you is kept.</p>
          </div>
        </div>
        <DuskDrawing
          farText={inWords(far.separationDeg)}
          closeText={inWords(close.separationDeg)}
          className="ms-[-88%] mt-2 h-auto w-[188%] max-w-none overflow-visible lg:absolute lg:inset-0 lg:m-0 lg:size-full"
        />
      </section>

      <Doors />

      <section
        aria-labelledby="why-two-stars"
        className="mt-16 grid gap-x-14 gap-y-6 lg:grid-cols-[1fr_1fr]"
      >
        <div className="max-w-measure">
          <h2 id="why-two-stars" className="text-2xl font-[560]">
            Why it matters which two
          </h2>
          <p className="mt-3">
            A telescope that finds things by itself must first be shown two stars. Show it two that
            stand well apart, and what you ask for next is in the eyepiece. Show it two neighbours,
            and it will be sure of itself and miss.
          </p>
          <p className="mt-3">
            Duskbench computes that for your date, your place, your skyline and your telescope, from
            the same geometry that will bite outdoors, and says what went wrong in degrees and
            fists.
          </p>
          <p className="mt-3">
            <TextLink href={routes.lessons.choosingAlignmentStars()}>
              Read the lesson on choosing alignment stars
            </TextLink>
          </p>
        </div>
        <figure className="max-w-measure self-center">
          <div className="space-y-5">
            <Meter
              value={far.hitRate * 100}
              label={`The two stars ${inWords(far.separationDeg)}`}
              valueText={`${ofHundred(far.hitRate)} of 100`}
            />
            <Meter
              value={close.hitRate * 100}
              label={`The two stars ${inWords(close.separationDeg)}`}
              valueText={`${ofHundred(close.hitRate)} of 100`}
            />
          </div>
          <figcaption className="mt-3 text-sm text-soft">
            Targets that would be in the eyepiece after aligning on the stars of the drawing above,
            with a 120 mm telescope of 600 mm focal length, its 9 mm eyepiece and stars centred by
            eye. Computed as in the lab; the share is approximate.
          </figcaption>
        </figure>
      </section>

      <div className="mt-16 max-w-[44rem]">
        <SunCaution />
      </div>
    </>
  );
}
