// All of what the whole program alone can do.
#include "../whole.hpp"

#include "../take_home/taking_home.hpp"
#include "serving.hpp"
#include "workbook_file.hpp"

namespace quoin::apps {

const Whole all_of_it = {serve, xlsx_bytes, take_home_command};

} // namespace quoin::apps
