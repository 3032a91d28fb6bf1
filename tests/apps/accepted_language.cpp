// Which language a request is answered in. Source of the rules: RFC 9110, 12.5.4.
#include <shown.hpp>

#include "apps/wire/accepted_language.hpp"

using namespace quoin;
using apps::accepted_language;

TEST_CASE("A request is answered in the language that it puts highest") {
    struct Row {
        const char* header;
        Language language;
    };
    for (const Row& row : {
             Row{"", Language::english},
             Row{"es", Language::spanish},
             Row{"ES", Language::spanish},
             Row{"es-MX", Language::spanish},
             Row{"es-419, en;q=0.5", Language::spanish},
             Row{"en-US,en;q=0.9,es;q=0.8", Language::english},
             Row{"en;q=0.7, es;q=0.8", Language::spanish},
             Row{"da, en-gb;q=0.8, en;q=0.7", Language::english}, // the RFC's own example
             Row{"da, es;q=0.2", Language::spanish},
             Row{"es, en", Language::spanish}, // as high: the first
             Row{"en, es", Language::english},
             Row{"es;q=0", Language::english}, // "not acceptable"
             Row{"es ; q=0.001", Language::spanish},
             Row{"es;q=2", Language::english}, // not a weight
             Row{"es;level=1", Language::english},
             Row{"*", Language::english},
             Row{"esperanto", Language::english},
             Row{",,;;-,q=1", Language::english},
         }) {
        CAPTURE(row.header);
        CHECK(accepted_language(row.header) == row.language);
    }
}
