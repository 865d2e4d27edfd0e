/** What the result of a job says. */
export interface OutcomeWords {
  readonly title: string;
  /** Of a job of which not all is invoiced yet; and why it is no more than that. */
  readonly soFar: string;
  readonly notAll: string;
  readonly nothingYet: string;
  readonly money: string;
  readonly what: string;
  readonly reckoned: string;
  readonly happened: string;
  readonly asReckoned: string;
  readonly net: string;
  readonly parts: Readonly<Record<'materials' | 'labour' | 'travel' | 'others', string>>;
  readonly cost: string;
  readonly overhead: string;
  readonly leaves: string;
  readonly margin: string;
  readonly hours: string;
  readonly earns: string;
  readonly tasks: string;
  readonly task: string;
  readonly noTask: string;
  readonly hoursReckoned: string;
  readonly hoursWorked: string;
  readonly toDo: string;
  readonly done: string;
  readonly inAnHour: string;
  readonly paid: string;
  readonly price: string;
  readonly invoiced: string;
  readonly paidIn: string;
  readonly held: string;
  readonly owed: string;
  readonly toInvoice: string;
  readonly forFirm: string;
}

export const OUTCOME_EN: OutcomeWords = {
  title: 'Result',
  soFar: 'Result so far',
  notAll: 'Not all of the price is invoiced yet: hours and costs may still come.',
  nothingYet: 'Nothing is recorded as worked or spent yet.',
  money: 'Cost and what it left',
  what: 'What',
  reckoned: 'Reckoned',
  happened: 'Happened',
  asReckoned: 'not recorded: as reckoned',
  net: 'Price before tax',
  parts: {
    materials: 'Materials',
    labour: 'Labour',
    travel: 'Travel',
    others: 'Other costs',
  },
  cost: 'Cost',
  overhead: 'Overhead',
  leaves: 'What it leaves',
  margin: 'Of the price before tax',
  hours: 'Hours, of one person',
  earns: 'Earned for each hour of the gang',
  tasks: 'Task by task',
  task: 'Task',
  noTask: 'no task said',
  hoursReckoned: 'Hours reckoned',
  hoursWorked: 'Worked',
  toDo: 'To do',
  done: 'Done',
  inAnHour: 'In an hour',
  paid: 'Paid and owed',
  price: 'Price with tax',
  invoiced: 'Invoiced',
  paidIn: 'Paid',
  held: 'Held back',
  owed: 'Owed',
  toInvoice: 'Still to invoice',
  forFirm: 'For the firm alone: it holds costs and what the job left.',
};
