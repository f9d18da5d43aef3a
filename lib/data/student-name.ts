import { faultOfName, longestDisplayName, nameFaultText } from '../roster/student-name';
import { nameSchema } from './names';

/** A student's name as it is stored: one line, and nothing that a spreadsheet would run. */
export const studentNameSchema = nameSchema('A name', longestDisplayName).superRefine(
  (name, context) => {
    const fault = faultOfName(name);
    if (fault !== null) context.addIssue({ code: 'custom', message: nameFaultText(fault) });
  },
);
