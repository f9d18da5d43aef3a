import { Button } from '@/components/ui/button';

/** A whole number from 0 up, by two buttons: for thumb, key and reader alike. */
export function SizeControl(props: {
  label: string;
  value: number;
  most: number;
  onChange: (value: number) => void;
}) {
  const { label, value, most, onChange } = props;
  return (
    <div role="group" aria-label={label}>
      <span className="text-sm font-semibold">{label}</span>
      <span className="mt-1 flex items-center gap-3">
        <Button aria-label={`Less: ${label}`} onClick={() => onChange(Math.max(0, value - 1))}>
          −
        </Button>
        <output className="min-w-8 text-center font-figures text-lg">{value}</output>
        <Button aria-label={`More: ${label}`} onClick={() => onChange(Math.min(most, value + 1))}>
          +
        </Button>
      </span>
    </div>
  );
}
