import { configureGlobal } from 'fast-check';

/**
 * Properties draw the same cases in every run, so that a change is judged by what it changed. Other cases:
 * `PROPERTY_SEED=12345 npx vitest run --project unit`; what they find becomes a case of its own.
 */
configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 20261125) });
