// All of what the whole program alone can do.
#include "../whole.hpp"

#include "serving.hpp"
#include "workbook_file.hpp"

namespace quoin::apps {

const Whole all_of_it = {serve, xlsx_bytes};

} // namespace quoin::apps
