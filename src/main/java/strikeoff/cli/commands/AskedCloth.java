package strikeoff.cli.commands;

import strikeoff.start.Said;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;

/** The cloth of a first plan as it was answered, and what the plan is called. */
record AskedCloth(
    String title, String fibre, Said<ArealMass> mass, Said<Length> length, Said<Length> width) {}
