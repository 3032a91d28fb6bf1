// The one file that may.
double allowed = 1.5;
