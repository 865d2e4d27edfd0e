/**
 * One seed for every property test that names none of its own: a run that fails fails again. To look further, set
 * PERPEND_SEED to another number.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.PERPEND_SEED ?? 20261125) });
