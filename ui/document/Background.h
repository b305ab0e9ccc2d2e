#pragma once

#include <QObject>
#include <QTimer>
#include <atomic>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>

namespace matwright {

// Works at one thing at a time away from the interface thread, on values of its own. All is asked and told in the
// thread of the object. Nothing is told once the object is gone, after drop(), or of work that other work was started
// in place of.
//
// Work keeps the values it needs and shares only what is safe to share. It looks often whether it is stopped: who
// destroys the object waits for it to return.
class Background : public QObject {
  Q_OBJECT

public:
  using Telling = std::function<void()>; // is called, if at all, in the thread of the object
  class Post;
  using Work = std::function<Telling(const Post& post)>; // returns how its result is told

  explicit Background(QObject* parent = nullptr);
  ~Background() override;

  // In place of what still runs, which is dropped. It begins when that has returned.
  void start(Work work);
  void stop(); // the work returns as soon as it looks; its result is told, whatever it has until then
  void drop(); // the same, and nothing is told
  bool isRunning() const { return running_ != nullptr; } // until the result is told

private:
  struct Job;

  void runJobs(); // in the other thread
  void tellProgress(const std::shared_ptr<Job>& job);
  void finish(const std::shared_ptr<Job>& job, const Telling& telling);

  std::shared_ptr<Job> running_; // whose result is awaited
  QTimer pause_;                 // between two tellings of progress

  std::mutex mutex_; // of what follows
  std::condition_variable wake_;
  std::shared_ptr<Job> next_;
  bool closing_ = false;
  std::thread thread_; // from the first work on
};

// How running work hears and is heard.
class Background::Post {
public:
  bool isStopped() const;
  // How far it is: the latest alone is told, every now and then, and none after the result.
  void progress(Telling telling) const;

private:
  friend Background;
  Post(Background& to, std::shared_ptr<Job> job) : to_(to), job_(std::move(job)) {}

  Background& to_;
  std::shared_ptr<Job> job_;
};

} // namespace matwright
