/** How much is pasted at once: read and put there in some three seconds, measured on two cores. */
export const MOST_PASTED_CELLS = 200_000;
