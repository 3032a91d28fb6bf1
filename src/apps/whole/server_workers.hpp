// Workers: a few threads that do what is ready to be done, in the order it came.
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace quoin::apps {

class Workers {
  public:
    explicit Workers(std::size_t threads) {
        for (std::size_t i = 0; i < threads; ++i) threads_.emplace_back([this] { work(); });
    }
    /// Does what was added, then ends.
    ~Workers() {
        {
            const std::lock_guard lock(mutex_);
            ending_ = true;
        }
        some_.notify_all();
        for (std::thread& thread : threads_) thread.join();
    }
    Workers(const Workers&) = delete;
    Workers& operator=(const Workers&) = delete;

    /// `job` throws nothing.
    void add(std::function<void()> job) {
        {
            const std::lock_guard lock(mutex_);
            jobs_.push_back(std::move(job));
        }
        some_.notify_one();
    }

  private:
    void work() {
        while (true) {
            std::unique_lock lock(mutex_);
            some_.wait(lock, [this] { return ending_ || !jobs_.empty(); });
            if (jobs_.empty()) return;
            const std::function<void()> job = std::move(jobs_.front());
            jobs_.pop_front();
            lock.unlock();
            job();
        }
    }

    std::mutex mutex_;
    std::condition_variable some_;
    std::deque<std::function<void()>> jobs_;
    bool ending_ = false;
    std::vector<std::thread> threads_;
};

} // namespace quoin::apps
