import { useId, type ReactNode } from 'react';
import { CircleAlert } from 'lucide-react';

export type FieldControlProps = {
  id: string;
  'aria-describedby': string | undefined;
  'aria-invalid': true | undefined;
};

type FieldProps = {
  label: ReactNode;
  /** What to type, said before anything goes wrong. */
  hint?: ReactNode;
  /** What is wrong and what to do. */
  error?: string | null;
  /** Give it the problem's field name, so that ErrorSummary can lead to it. */
  id?: string;
  /** Said after the label for what may stay empty. */
  optional?: boolean;
  children: (control: FieldControlProps) => ReactNode;
};

/** A label, its control, a hint and an error that belong together for eye and reader alike. */
export function Field({ label, hint, error, id, optional = false, children }: FieldProps) {
  const ownId = useId();
  const controlId = id ?? ownId;
  const hintId = `${controlId}-hint`;
  const errorId = `${controlId}-error`;
  const hasHint = hint !== undefined && hint !== null && hint !== '';
  const hasError = error !== undefined && error !== null && error !== '';
  const describedBy = [hasHint ? hintId : '', hasError ? errorId : '']
    .filter((part) => part !== '')
    .join(' ');
  return (
    <div className="flex flex-col gap-1">
      <label htmlFor={controlId} className="font-semibold">
        {label}
        {optional ? <span className="font-normal text-soft"> (may stay empty)</span> : null}
      </label>
      {hasHint ? (
        <p id={hintId} className="max-w-measure text-sm text-soft">
          {hint}
        </p>
      ) : null}
      {children({
        id: controlId,
        'aria-describedby': describedBy === '' ? undefined : describedBy,
        'aria-invalid': hasError ? true : undefined,
      })}
      {hasError ? <FieldError id={errorId}>{error}</FieldError> : null}
    </div>
  );
}

export function FieldError({ id, children }: { id: string; children: ReactNode }) {
  return (
    <p id={id} className="flex max-w-measure items-start gap-1.5 text-sm font-semibold text-danger">
      <CircleAlert aria-hidden="true" className="mt-[0.2em] size-[1.1em] shrink-0" />
      <span>{children}</span>
    </p>
  );
}
