#include "exact/money.hpp"
