// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

import org.junit.jupiter.api.Test;

import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class WorkhandTest {
    private final Workhand hand = new Workhand();

    /** Variants keep their hand for as long as the notebook lives: a thread for each would add up. */
    @Test
    void a_thread_with_nothing_to_do_goes_and_another_comes_when_asked() throws InterruptedException {
        Thread worker = hand.call(Thread::currentThread);
        assertThat(worker.isDaemon()).isTrue();

        worker.join(10_000);

        assertThat(worker.isAlive()).isFalse();
        assertThat(hand.call(() -> 5)).isEqualTo(5);
    }

    @Test
    void what_the_work_ended_with_reaches_who_asked() {
        assertThatThrownBy(() -> hand.call(() -> {
                    throw new IllegalArgumentException("not so");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("not so");
    }

    /** The work goes on, on its own; neither the cell nor what is asked next waits for it. */
    @Test
    void a_cell_that_is_to_stop_gives_up_what_it_waits_for() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch never = new CountDownLatch(1);
        AtomicReference<Throwable> ended = new AtomicReference<>();
        ThreadGroup group = new ThreadGroup("a cell that waits");
        Thread cell = new Thread(group, () -> {
            try {
                hand.call(() -> {
                    begun.countDown();
                    awaitUninterruptibly(never);
                    return 1;
                });
            } catch (Throwable thrown) {
                ended.set(thrown);
            }
        });
        Stop.begin(group);
        cell.start();
        try {
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
            Stop.stop(group);
            cell.interrupt();
            cell.join(10_000);

            assertThat(ended.get()).isInstanceOf(Stopped.class);
            // On a thread of another cell, while the old work still goes on.
            ThreadGroup next = new ThreadGroup("the next cell");
            Stop.begin(next);
            AtomicReference<Integer> answer = new AtomicReference<>();
            Thread other = new Thread(next, () -> answer.set(hand.call(() -> 2)));
            other.start();
            other.join(10_000);
            assertThat(answer.get()).isEqualTo(2);
        } finally {
            never.countDown();
        }
    }

    private static void awaitUninterruptibly(CountDownLatch latch) {
        boolean waiting = true;
        while (waiting) {
            try {
                latch.await();
                waiting = false;
            } catch (InterruptedException again) {
                waiting = true;
            }
        }
    }
}
