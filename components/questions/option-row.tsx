import type { ReactNode } from 'react';
import { classNames } from '@/components/ui/class-names';
import { choiceLook } from '@/components/ui/checkbox';

type OptionRowProps = {
  type: 'radio' | 'checkbox';
  id: string;
  name: string;
  value: string;
  checked: boolean;
  disabled: boolean;
  onChange: (checked: boolean) => void;
  children: ReactNode;
};

/** One answer to choose; the whole row is the target. */
export function OptionRow({ type, id, onChange, disabled, children, ...rest }: OptionRowProps) {
  return (
    <label
      htmlFor={id}
      className={classNames(
        'flex min-h-11 items-start gap-2.5 rounded-md border border-transparent px-2 py-2',
        disabled ? '' : 'hover:bg-sunken',
        'has-checked:border-strong has-checked:bg-panel',
      )}
    >
      <input
        {...rest}
        id={id}
        type={type}
        disabled={disabled}
        onChange={(event) => {
          onChange(event.currentTarget.checked);
        }}
        className={classNames(
          choiceLook,
          type === 'radio' ? 'radio-dot rounded-full' : 'tick-box rounded-md',
        )}
      />
      <span className="min-w-0">{children}</span>
    </label>
  );
}
