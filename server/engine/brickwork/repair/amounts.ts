/** Small makers of what mendings hand on. */
import type { Term } from '../../working/term';
import type { Task } from './mending';

export function amountIn(task: string, label: string, amount: Term): Task {
  return { task, label, amount };
}
