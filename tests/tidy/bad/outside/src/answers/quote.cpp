// Asks the world, which a floor below apps must not.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <random>
#include <thread>

const auto now = std::chrono::system_clock::now();
const auto home = std::getenv("HOME");
void out() {
    std::ifstream file(home);
    std::cout << "out";
    std::printf("out");
    fmt::print("out");
    page.printf("not the function");
    std::thread worker(out);
}
