import type { FieldControlProps } from '@/components/ui/field';

/** Opens one file on this computer; it is read here and not sent. */
export function FileInput({
  control,
  accept,
  onFile,
}: {
  control: FieldControlProps;
  accept: string;
  onFile: (file: File) => void;
}) {
  return (
    <input
      {...control}
      type="file"
      accept={accept}
      className="block min-h-(--target) max-w-full text-sm file:me-3 file:min-h-(--target) file:rounded-md file:border file:border-strong file:bg-panel file:px-4 file:font-semibold"
      onChange={(event) => {
        const file = event.target.files?.[0];
        // Lets the same file be chosen again after it was mended.
        event.target.value = '';
        if (file !== undefined) onFile(file);
      }}
    />
  );
}
