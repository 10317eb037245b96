package strikeoff.timeline;

/** How the film of one impression dries. */
public record Film(Reached frameSafe, Reached liftSafe, Reached fixSafe) {}
