/** Who asks, so that no two learners read the same sentence. */
export const askers = [
  'Your partner',
  'A new member of the club',
  'A younger student',
  'A visitor at the open evening',
  'Somebody at the next table',
  'Your neighbour in class',
  'The smallest in the group',
  'A friend from another class',
] as const;
