// A part at home that is being fitted: the Counter hands it to the Bay.

/** By this name it is handed over, as a `PartView` with how much is left of it. */
export const FITTED_FOR_BAY = 'fitted';
