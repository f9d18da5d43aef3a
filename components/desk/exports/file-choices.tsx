import { Checkbox } from '@/components/ui/checkbox';

/** Nothing ticked gives the least away: card numbers, and no accommodations. */
export function NamesChoice({ hint }: { hint?: string }) {
  return <Checkbox label="With names" name="names" value="shown" hint={hint} />;
}

export function AccommodationsChoice() {
  return (
    <Checkbox
      label="With extra attempts and extra time"
      name="accommodations"
      value="with"
      hint="They tell something of a child’s needs. Tick this only for somebody who must know."
    />
  );
}
