// The one that may.
#include <httplib.h>
