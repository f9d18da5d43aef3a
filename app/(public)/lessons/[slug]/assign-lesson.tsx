import { LinkButton } from '@/components/ui/link-button';
import { getViewer } from '@/lib/auth/session';
import { listClasses } from '@/lib/data/classes';
import { routes } from '@/lib/routes';

/** For a signed-in teacher: to the form of a new assignment with this lesson and its questions chosen. */
export async function AssignLesson({ slug }: { slug: string }) {
  const viewer = await getViewer();
  if (viewer.kind !== 'teacher') return null;
  const taught = (await listClasses(viewer)).filter(
    ({ role, archivedAt }) => role !== 'observer' && archivedAt === null,
  );
  const [only, ...others] = taught;
  if (only === undefined) return null;
  const formOf = (classId: string) => routes.teacher.newAssignment(classId, { lesson: slug });
  return (
    <section
      aria-labelledby="assign-lesson"
      className="no-print my-8 border-t-2 border-strong bg-panel px-4 py-4 sm:px-6"
    >
      <h2 id="assign-lesson" className="text-lg font-semibold">
        Assign this lesson
      </h2>
      <p className="mb-3 max-w-measure text-soft">
        The class gets the lesson to read and eight questions on it, other ones for each student.
        {others.length > 0 ? ' Which class?' : ''}
      </p>
      <div className="flex flex-wrap gap-3">
        {taught.map(({ id, name }) => (
          <LinkButton key={id} href={formOf(id)}>
            {others.length > 0 ? name : `Assign it to ${name}`}
          </LinkButton>
        ))}
      </div>
    </section>
  );
}
