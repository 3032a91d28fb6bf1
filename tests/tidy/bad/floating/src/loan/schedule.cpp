// A double in a comment is no double; nor is "float" in a text.
const char* text = "a double of 1.5"; /* float
   over two lines: double */
const char* raw = R"(a "double" of 2.5)";
double payment();
const long grouped = 1'000'000 + 0x1F;
const auto half = 0.5;
const auto small = 1e-3;
void take(double) = delete;
const auto read = std::stod(text);
