#include "ui/document/Background.h"

#include <QElapsedTimer>
#include <QTest>
#include <QThread>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <semaphore>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// What was told, in order.
struct BackgroundWork : ::testing::Test {
  std::vector<int> told;
  std::binary_semaphore begun{0}, go{0}; // the test waits for the first, work for the second
  std::unique_ptr<Background> background = std::make_unique<Background>();

  Background::Telling tell(int number) {
    return [this, number] { told.push_back(number); };
  }
  // Tells `number` when it was told to go on.
  Background::Work waiting(int number) {
    return [this, number](const Background::Post&) {
      begun.release();
      go.acquire();
      return tell(number);
    };
  }
  // Tells how often it looked whether it was stopped, up to the first time that it was.
  Background::Work untilStopped(std::atomic<int>& looks) {
    return [this, &looks](const Background::Post& post) {
      begun.release();
      while (!post.isStopped())
        ++looks;
      return tell(looks);
    };
  }
  bool comesToRest() {
    return QTest::qWaitFor([this] { return !background->isRunning(); }, 20000);
  }
  // What another thread has posted until now is dealt with, too.
  static void settle() { QTest::qWait(60); }
};

TEST_F(BackgroundWork, RunsElsewhereAndTellsItsResultHere) {
  const auto here = std::this_thread::get_id();
  std::thread::id worked, heard;
  background->start([&](const Background::Post&) {
    worked = std::this_thread::get_id();
    return [&] { heard = std::this_thread::get_id(); };
  });
  EXPECT_TRUE(background->isRunning());
  ASSERT_TRUE(comesToRest());
  EXPECT_NE(worked, here);
  EXPECT_EQ(heard, here);
}

TEST_F(BackgroundWork, IsOverWhenItsResultIsTold) {
  bool running = true;
  background->start([&](const Background::Post&) { return [&] { running = background->isRunning(); }; });
  ASSERT_TRUE(comesToRest());
  EXPECT_FALSE(running);
}

TEST_F(BackgroundWork, ASecondRunTellsItsOwnResult) {
  for (int run : {1, 2}) {
    background->start([&](const Background::Post&) { return tell(run); });
    ASSERT_TRUE(comesToRest());
  }
  EXPECT_THAT(told, ElementsAre(1, 2));
}

TEST_F(BackgroundWork, StoppedWorkTellsWhatItHas) {
  std::atomic<int> looks = 0;
  background->start(untilStopped(looks));
  begun.acquire();
  background->stop();
  EXPECT_TRUE(background->isRunning());
  ASSERT_TRUE(comesToRest());
  EXPECT_THAT(told, ElementsAre(looks.load()));
}

TEST_F(BackgroundWork, WorkIsStoppedTheNextTimeItLooks) {
  int looks = 0;
  background->start([&](const Background::Post& post) {
    begun.release();
    go.acquire();
    do
      ++looks;
    while (!post.isStopped() && looks < 1000);
    return tell(looks);
  });
  begun.acquire();
  background->stop();
  go.release();
  ASSERT_TRUE(comesToRest());
  EXPECT_THAT(told, ElementsAre(1));
}

TEST_F(BackgroundWork, ADroppedResultIsNotTold) {
  background->start(waiting(1));
  begun.acquire();
  background->drop();
  EXPECT_FALSE(background->isRunning());
  go.release();
  settle();
  EXPECT_THAT(told, IsEmpty());
}

TEST_F(BackgroundWork, ADroppedResultIsNotToldEvenIfItWasOnItsWay) {
  background->start(waiting(1));
  begun.acquire();
  go.release();
  QThread::msleep(50); // its result is posted, and nobody has looked yet
  background->drop();
  settle();
  EXPECT_THAT(told, IsEmpty());
}

TEST_F(BackgroundWork, WorkThatIsDroppedBeforeItBeginsIsNotDone) {
  background->start(waiting(1));
  begun.acquire();
  bool done = false;
  background->start([&](const Background::Post&) {
    done = true;
    return tell(2);
  });
  background->drop();
  go.release();
  settle();
  EXPECT_FALSE(done);
  EXPECT_THAT(told, IsEmpty());
}

TEST_F(BackgroundWork, NewWorkTakesThePlaceOfTheOld) {
  std::atomic<int> looks = 0;
  background->start(untilStopped(looks));
  begun.acquire();
  background->start([&](const Background::Post& post) { return tell(post.isStopped() ? -2 : -1); });
  ASSERT_TRUE(comesToRest());
  settle();
  EXPECT_THAT(told, ElementsAre(-1));
}

TEST_F(BackgroundWork, OfSeveralStartsTheLastAloneIsDone) {
  background->start(waiting(1));
  begun.acquire();
  int done = 0;
  for (int run : {2, 3, 4})
    background->start([&, run](const Background::Post&) {
      ++done;
      return tell(run);
    });
  go.release();
  ASSERT_TRUE(comesToRest());
  settle();
  EXPECT_THAT(told, ElementsAre(4));
  EXPECT_EQ(done, 1);
}

TEST_F(BackgroundWork, NothingIsToldOnceItIsGone) {
  std::atomic<int> looks = 0;
  background->start([&, until = untilStopped(looks)](const Background::Post& post) {
    post.progress(tell(1));
    return until(post);
  });
  begun.acquire();
  background.reset(); // waits for the work
  const int then = looks;
  settle();
  EXPECT_EQ(looks, then);
  EXPECT_THAT(told, IsEmpty());
}

TEST_F(BackgroundWork, MayBeDestroyedByWhatItTells) {
  background->start([&](const Background::Post&) { return [&] { background.reset(); }; });
  EXPECT_TRUE(QTest::qWaitFor([&] { return !background; }, 20000));
}

TEST_F(BackgroundWork, MayBeStartedByWhatItTells) {
  background->start([&](const Background::Post&) {
    return [&] { background->start([&](const Background::Post&) { return tell(2); }); };
  });
  ASSERT_TRUE(comesToRest());
  EXPECT_THAT(told, ElementsAre(2));
}

TEST_F(BackgroundWork, OfProgressTheLatestIsTold) {
  background->start([&](const Background::Post& post) {
    for (int i = 1; i <= 1000; ++i)
      post.progress(tell(i));
    begun.release();
    go.acquire();
    return tell(-1);
  });
  begun.acquire();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !told.empty(); }, 20000));
  settle();
  EXPECT_THAT(told, ElementsAre(1000));
  go.release();
  ASSERT_TRUE(comesToRest());
  EXPECT_THAT(told, ElementsAre(1000, -1));
}

TEST_F(BackgroundWork, ProgressIsToldOnlyNowAndThenAndItsLastNotLost) {
  constexpr int kLast = 200;
  QElapsedTimer clock;
  clock.start();
  background->start([&](const Background::Post& post) {
    for (int i = 1; i <= kLast; ++i) {
      post.progress(tell(i));
      QThread::msleep(1);
    }
    begun.release();
    go.acquire();
    return Background::Telling();
  });
  ASSERT_TRUE(QTest::qWaitFor([&] { return !told.empty() && told.back() == kLast; }, 20000));
  EXPECT_LE(static_cast<qint64>(told.size()), 2 + clock.elapsed() / 40);
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
  go.release();
  ASSERT_TRUE(comesToRest());
}

TEST_F(BackgroundWork, NoProgressIsToldAfterTheResult) {
  background->start([&](const Background::Post& post) {
    for (int i = 1; i <= 3; ++i) {
      post.progress(tell(i));
      QThread::msleep(5);
    }
    return tell(-1);
  });
  ASSERT_TRUE(comesToRest());
  settle();
  EXPECT_EQ(told.back(), -1);
}

TEST_F(BackgroundWork, NoProgressIsToldOfWorkThatIsReplaced) {
  background->start([&](const Background::Post& post) {
    post.progress(tell(1));
    begun.release();
    go.acquire();
    return tell(2);
  });
  begun.acquire();
  background->start([&](const Background::Post&) { return tell(3); });
  go.release();
  ASSERT_TRUE(comesToRest());
  settle();
  EXPECT_THAT(told, ElementsAre(3));
}

TEST_F(BackgroundWork, StopWithoutWorkIsNothing) {
  background->stop();
  background->drop();
  settle();
  EXPECT_FALSE(background->isRunning());
}

} // namespace
} // namespace matwright
