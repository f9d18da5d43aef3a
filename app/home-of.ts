import type { Viewer } from '@/lib/auth/policy';
import { routes } from '@/lib/routes';

/** Where whoever is signed in belongs. */
export function homeOf(viewer: Exclude<Viewer, { kind: 'anonymous' }>): string {
  switch (viewer.kind) {
    case 'student':
      return routes.student.myWork();
    case 'cover':
      return routes.teacher.classLive(viewer.classId);
    case 'teacher':
      return routes.teacher.desk();
  }
}
