package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A warm-up that fails would go unnoticed: runs would only be slower. */
class WarmUpTest {
    @Test
    void doesItsWorkToTheEnd() throws InterruptedException {
        Thread thread = WarmUp.start(new String[] {"make", "harbour-light"}).orElseThrow();
        thread.join(60_000);
        assertThat(thread.isAlive()).isFalse();
        assertThat(thread.getName()).isEqualTo("warm-up");
    }

    @Test
    void isLeftAloneWhereNothingIsMade() {
        assertThat(WarmUp.start(new String[] {"presets"})).isEmpty();
    }
}
