/** Controls are wells in the bench: a sunken floor with a firm edge (3:1, 1.4.11). */
export const inputLook =
  'w-full min-h-(--target) rounded-md border border-strong bg-panel px-3 py-1.5 text-base text-ink shadow-[inset_0_1px_0_var(--line)] placeholder:text-soft disabled:cursor-not-allowed disabled:bg-sunken disabled:text-soft [&[readonly]]:bg-sunken aria-invalid:border-2 aria-invalid:border-danger';
