/** How long a test in the browser waits for one thing, ms: far longer than it takes on a machine that others keep busy. */
export const PATIENCE = 90_000;
