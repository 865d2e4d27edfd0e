/** In which order the tasks of one piece of work are done, which of them raise it, and which have to set: as the defaults say. */
import { wordOf } from '../resolve/book';
import { defaultLine, type Env } from '../resolve/env';

export class TaskOrder {
  private readonly order: readonly string[];
  private readonly raising: ReadonlySet<string>;
  private readonly letIn: ReadonlySet<string>;
  private readonly overnight: ReadonlySet<string>;

  constructor(env: Env) {
    this.order = tasksIn('task-order', env);
    this.raising = new Set(tasksIn('raising', env));
    this.letIn = new Set(tasksIn('let-in', env));
    this.overnight = new Set(tasksIn('overnight', env));
  }

  /** No more of it in a day than a lift. */
  raises(task: string): boolean {
    return this.raising.has(task);
  }

  /** It has to set before anything stands on it. */
  sets(task: string): boolean {
    return this.overnight.has(task);
  }

  /** It is let into the work as it goes up: after its first lift, before its last. */
  isLetIn(task: string): boolean {
    return this.letIn.has(task);
  }

  /** What is not in the list comes after what raises the work and what is let into it, and before what finishes it. */
  placeOf(task: string): number {
    const at = this.order.indexOf(task);
    if (at >= 0) return at;
    const last = this.order.findLastIndex((other) => this.raises(other) || this.isLetIn(other));
    return last + 0.5;
  }
}

function tasksIn(key: string, env: Env): string[] {
  const value = defaultLine(env, key)?.values.tasks;
  return value?.kind === 'list' ? value.of.map((each) => wordOf(each.task)) : [];
}
