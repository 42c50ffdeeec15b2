/** What reading an installation refuses beyond this schema. */
export const beyond = [
  "ids that are given twice",
  "references to nothing, and boxes and disconnects that no run reaches from the source",
  "circles of runs, of electrodes, and of circuits",
  "sets that the raceways of a run cannot share evenly",
  "sets that list different numbers of phases, or none, and more than 2000 sets in one supply",
  "an impedance without impedance grounding, or the other way round; a grounding that the connection does not allow",
  "a ring electrode without the size of its conductor, one below the minimum size, or such a size for another electrode",
  "a service without service disconnect; what bonds a disconnect, given where it is service equipment or missing where it is not",
  "a grounded conductor that bonds metal, or has a load, in a system without one",
  "parallel raceways without their number, or an increase without the conductors as installed or of another material",
  "a generator's device where it is not integral, or none where it is",
  "metal that is an electrode elsewhere than at a derived system, and a busbar's conductor without busbar",
  "feeders of buildings without conductors, where an electrode conductor or a jumper goes by them",
  "unknown readings; ratings, loads and currents beyond the tables of the edition; a busbar before the edition that has it",
  "documents of more than 5,000,000 characters or 50,000 objects and lists, or of a newer format",
];
