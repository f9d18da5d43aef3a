/** All that is said about a bench lab as such: to visitors, students and the teacher who sets it. */
export type BenchText<T extends string = string> = {
  /** "Level" */
  name: string;
  /** Over the panel: "Level the tripod" */
  task: string;
  /** One line for a list of labs. */
  hint: string;
  /** Two or three sentences for whoever wonders whether to open it, with about how long it takes. */
  whatItIs: string;
  /** Above the form that makes a round. */
  lead: string;
  /** Over the result on the teacher's page: "How it was levelled, and what is left" */
  outcomeTitle: string;
  /** Over the answer key: how tasks differ from student to student. */
  keyLead: string;
  /** Each kind of task, as a teacher chooses it. */
  templates: Readonly<Record<T, { name: string; hint: string }>>;
};
