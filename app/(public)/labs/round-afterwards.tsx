import { LinkButton } from '@/components/ui/link-button';

/** Where a visitor goes from what came of a round. */
export function RoundAfterwards({
  nextAddress,
  setUpAddress,
  next = 'Another sky',
}: {
  nextAddress: string;
  setUpAddress: string;
  /** What a new round of the lab is called. */
  next?: string;
}) {
  return (
    <>
      <LinkButton href={nextAddress} variant="primary" size="large">
        {next}
      </LinkButton>
      <LinkButton href={setUpAddress} size="large">
        Other place, time or telescope
      </LinkButton>
    </>
  );
}
