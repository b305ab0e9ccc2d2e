#include "ui/document/Background.h"

#include <utility>

namespace matwright {
namespace {

constexpr int kPause = 40; // milliseconds: more often nobody reads it

} // namespace

struct Background::Job {
  Work work;
  std::atomic<bool> stopped = false;
  std::mutex mutex; // of what follows
  Telling progress; // not told yet
};

bool Background::Post::isStopped() const { return job_->stopped; }

void Background::Post::progress(Telling telling) const {
  bool announced = true;
  {
    const std::lock_guard lock(job_->mutex);
    announced = static_cast<bool>(std::exchange(job_->progress, std::move(telling)));
  }
  if (!announced)
    QMetaObject::invokeMethod(
        &to_, [&to = to_, job = job_] { to.tellProgress(job); }, Qt::QueuedConnection);
}

Background::Background(QObject* parent) : QObject(parent) {
  pause_.setSingleShot(true);
  pause_.setInterval(kPause);
  connect(&pause_, &QTimer::timeout, this, [this] { tellProgress(running_); });
}

Background::~Background() {
  drop();
  {
    const std::lock_guard lock(mutex_);
    closing_ = true;
  }
  wake_.notify_one();
  if (thread_.joinable())
    thread_.join();
}

void Background::start(Work work) {
  stop();
  pause_.stop();
  running_ = std::make_shared<Job>();
  running_->work = std::move(work);
  {
    const std::lock_guard lock(mutex_);
    next_ = running_;
  }
  if (thread_.joinable())
    wake_.notify_one();
  else
    thread_ = std::thread([this] { runJobs(); });
}

void Background::stop() {
  if (running_)
    running_->stopped = true;
}

void Background::drop() {
  stop();
  pause_.stop();
  running_.reset();
  const std::lock_guard lock(mutex_);
  next_.reset();
}

void Background::runJobs() {
  while (true) {
    std::shared_ptr<Job> job;
    {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return closing_ || next_; });
      if (closing_)
        return;
      job = std::exchange(next_, nullptr);
    }
    Telling telling = std::exchange(job->work, nullptr)(Post(*this, job));
    QMetaObject::invokeMethod(
        this, [this, job = std::move(job), telling = std::move(telling)] { finish(job, telling); },
        Qt::QueuedConnection);
  }
}

void Background::tellProgress(const std::shared_ptr<Job>& job) {
  if (!job || job != running_ || pause_.isActive())
    return;
  Telling telling;
  {
    const std::lock_guard lock(job->mutex);
    telling = std::exchange(job->progress, nullptr);
  }
  if (!telling)
    return;
  pause_.start();
  telling();
}

void Background::finish(const std::shared_ptr<Job>& job, const Telling& telling) {
  if (job != running_)
    return;
  pause_.stop();
  running_.reset();
  if (telling)
    telling();
}

} // namespace matwright
