/**
 * The columns that are read of 1EdTech OneRoster 1.2, CSV binding 1.2.1 (final release, 22 August 2023).
 * The required ones must be there and filled in every row; those of users, classes and enrollments are
 * the standard's, those of roles from memory of it. No other column leaves the parser: email, phone,
 * password and demographics are never looked at.
 */
export const oneRosterTables = {
  'users.csv': {
    required: ['sourcedId', 'enabledUser', 'username', 'givenName', 'familyName'],
    optional: ['status', 'preferredGivenName', 'preferredFamilyName'],
  },
  'classes.csv': {
    required: [
      'sourcedId',
      'title',
      'courseSourcedId',
      'classType',
      'schoolSourcedId',
      'termSourcedIds',
    ],
    optional: ['status'],
  },
  'enrollments.csv': {
    required: ['sourcedId', 'classSourcedId', 'schoolSourcedId', 'userSourcedId', 'role'],
    optional: ['status', 'endDate'],
  },
  'roles.csv': {
    required: ['sourcedId', 'userSourcedId', 'roleType', 'role', 'orgSourcedId'],
    optional: ['status'],
  },
} as const;

export type OneRosterTable = keyof typeof oneRosterTables;
export const oneRosterTableNames: readonly OneRosterTable[] = [
  'users.csv',
  'classes.csv',
  'enrollments.csv',
  'roles.csv',
];
export const manifestName = 'manifest.csv';

/** How a table comes: the whole of it, or what changed since the last one. */
export type TransferMode = 'bulk' | 'delta';
