// Good as it is.
#include <string>
