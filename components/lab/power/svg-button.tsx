import type { ComponentProps, KeyboardEvent, ReactNode } from 'react';

type SvgButtonProps = Omit<ComponentProps<'g'>, 'onClick' | 'children'> & {
  label: string;
  /** What can be hit; at least as large as what is seen. */
  hit: { x: number; y: number; width: number; height: number };
  pressed?: boolean;
  onPress: () => void;
  children: ReactNode;
};

/** Something in a drawing that does something: by pointer, by Enter and by the space bar. */
export function SvgButton({ label, hit, pressed, onPress, children, ...rest }: SvgButtonProps) {
  return (
    <g
      {...rest}
      role="button"
      tabIndex={0}
      aria-label={label}
      aria-pressed={pressed}
      className="cursor-pointer [&:focus:not(:focus-visible)]:outline-none"
      onClick={onPress}
      onKeyDown={(event: KeyboardEvent) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onPress();
      }}
    >
      <rect {...hit} fill="transparent" />
      {children}
    </g>
  );
}
