// A date, not finished.
// TODO: leap years
