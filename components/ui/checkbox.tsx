import { useId, type ComponentProps, type ReactNode } from 'react';
import { classNames } from './class-names';

type CheckboxProps = Omit<ComponentProps<'input'>, 'type'> & { label: ReactNode; hint?: ReactNode };

/** Its colours, empty and chosen, are in globals.css: a utility here would outdo those of :checked. */
export const choiceLook =
  'mt-[0.15em] size-[1.45rem] shrink-0 appearance-none border disabled:opacity-60';

/** A choice of yes or no. The whole row is the target. */
export function Checkbox({ label, hint, className, id, ...rest }: CheckboxProps) {
  const ownId = useId();
  const controlId = id ?? ownId;
  const hintId = `${controlId}-hint`;
  return (
    <div className={classNames('flex min-h-(--target-small) items-start gap-2.5', className)}>
      <input
        {...rest}
        id={controlId}
        type="checkbox"
        aria-describedby={hint === undefined ? rest['aria-describedby'] : hintId}
        className={classNames(choiceLook, 'tick-box rounded-md')}
      />
      <div>
        <label htmlFor={controlId}>{label}</label>
        {hint === undefined ? null : (
          <p id={hintId} className="max-w-measure text-sm text-soft">
            {hint}
          </p>
        )}
      </div>
    </div>
  );
}
