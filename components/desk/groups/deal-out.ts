/** Who is in which group; the order of the groups is the order they are dealt to. */
type Hand = { studentIds: readonly string[] };

/**
 * Deals students out one by one, each to the smallest group, the first of them where several are: from
 * empty groups the sizes differ by one at most, and whoever is in a group already stays. The same
 * students in the same order always come out the same.
 */
export function dealOut<Group extends Hand>(
  groups: readonly Group[],
  studentIds: readonly string[],
): Group[] {
  const hands = groups.map((group) => [...group.studentIds]);
  for (const studentId of studentIds) {
    const smallest = hands.reduce<string[] | null>(
      (least, hand) => (least === null || hand.length < least.length ? hand : least),
      null,
    );
    smallest?.push(studentId);
  }
  return groups.map((group, index) => ({ ...group, studentIds: hands[index] ?? [] }));
}
