import { LinkButton } from '@/components/ui/link-button';

/** Where a visitor goes from what came of a round. */
export function RoundAfterwards({
  nextAddress,
  setUpAddress,
}: {
  nextAddress: string;
  setUpAddress: string;
}) {
  return (
    <>
      <LinkButton href={nextAddress} variant="primary" size="large">
        Another sky
      </LinkButton>
      <LinkButton href={setUpAddress} size="large">
        Other place, time or telescope
      </LinkButton>
    </>
  );
}
