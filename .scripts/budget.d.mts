/** What the tests use of budget.mjs: bytes by bundle. */
export const bundleBudgets: Readonly<Record<string, number>>;
