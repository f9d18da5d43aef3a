/** Why an attempt could not be started; null while nothing was tried. */
export type StartState = { problem: string | null };
export type StartAction = (state: StartState, form: FormData) => Promise<StartState>;
