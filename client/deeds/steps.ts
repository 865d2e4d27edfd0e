/** Questions one after the other, each with its number and a way back. */
import { Disposable, QuickInputButtons, type QuickPickItem, window } from 'vscode';
import { unlinked } from '../unlinked';

/** The reader wants the question before. */
export const BACK = Symbol('back');
export type Answer<T> = T | typeof BACK | undefined;

/** Where a question stands among the others. */
export interface At {
  readonly title: string;
  readonly step: number;
  readonly totalSteps: number;
}

/** Undefined when the reader turns away. */
export type Step<S> = (state: S, at: At) => Promise<Answer<S>>;

/** @param stepsFor may come to more or fewer once something has been answered */
export async function runSteps<S>(
  title: string,
  first: S,
  stepsFor: (state: S) => readonly Step<S>[],
): Promise<S | undefined> {
  const states = [first];
  for (;;) {
    const state = states.at(-1)!;
    const steps = stepsFor(state);
    const step = steps[states.length - 1];
    if (!step) return state;
    const answer = await step(state, { title, step: states.length, totalSteps: steps.length });
    if (answer === undefined) return undefined;
    if (answer === BACK) states.pop();
    else states.push(answer);
  }
}

interface Ask extends At {
  readonly prompt: string;
  readonly value?: string;
  readonly placeholder?: string;
  /** What is wrong with it; nothing when nothing is. */
  readonly wrong?: (said: string) => string | undefined | Promise<string | undefined>;
}

/** A line of text, taken only when nothing is wrong with it. */
export function ask({ wrong = () => undefined, ...shown }: Ask): Promise<Answer<string>> {
  const box = window.createInputBox();
  const { prompt, value = '', placeholder, title, step, totalSteps } = shown;
  const said = { prompt: unlinked(prompt), value, placeholder, title };
  Object.assign(box, { ...said, step, totalSteps, ignoreFocusOut: true });
  return answered(
    box,
    step,
    async () => {
      // Who types on while it is looked at has not said that yet.
      const said = box.value;
      box.busy = true;
      const fault = await wrong(said);
      box.busy = false;
      if (box.value !== said) return undefined;
      box.validationMessage = fault && unlinked(fault);
      return fault === undefined ? { value: said } : undefined;
    },
    box.onDidChangeValue(() => {
      box.validationMessage = undefined;
    }),
  );
}

interface Choose<T extends QuickPickItem> extends At {
  readonly items: readonly T[];
  readonly placeholder: string;
  readonly many?: boolean;
  /** Chosen from the beginning. */
  readonly picked?: readonly T[];
}

/** Some of a list; one, unless it may be many. */
export function choose<T extends QuickPickItem>({
  items,
  many,
  picked,
  ...shown
}: Choose<T>): Promise<Answer<readonly T[]>> {
  const box = window.createQuickPick<T>();
  const { placeholder, title, step, totalSteps } = shown;
  Object.assign(box, { placeholder, title, step, totalSteps, items, ignoreFocusOut: true });
  box.canSelectMany = many ?? false;
  box.matchOnDescription = true;
  box.matchOnDetail = true;
  if (picked) box.selectedItems = picked;
  return answered(box, step, () => {
    const chosen = many ? box.selectedItems : box.activeItems.slice(0, 1);
    return Promise.resolve(chosen.length || many ? { value: chosen } : undefined);
  });
}

type Box = Pick<
  ReturnType<typeof window.createInputBox>,
  'buttons' | 'onDidAccept' | 'onDidHide' | 'onDidTriggerButton' | 'show' | 'dispose'
>;

/** Shows it until it is answered, left, or the reader goes back. */
async function answered<T>(
  box: Box,
  step: number,
  accept: () => Promise<{ readonly value: T } | undefined>,
  ...others: Disposable[]
): Promise<Answer<T>> {
  if (step > 1) box.buttons = [QuickInputButtons.Back];
  const listening: Disposable[] = [];
  const answer = await new Promise<Answer<T>>((resolve) => {
    listening.push(
      box.onDidHide(() => resolve(undefined)),
      box.onDidTriggerButton(() => resolve(BACK)),
      box.onDidAccept(async () => {
        const taken = await accept();
        if (taken) resolve(taken.value);
      }),
    );
    box.show();
  });
  Disposable.from(...listening, ...others).dispose();
  box.dispose();
  return answer;
}
