// Money.
#include <string>
