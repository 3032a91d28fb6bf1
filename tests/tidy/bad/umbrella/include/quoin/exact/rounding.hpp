// Rounding.
#pragma once
