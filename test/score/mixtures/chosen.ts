/**
 * What is fitted for the engine. The set has the least surprise on unseen pairs and on unseen surfactants; of the ridges
 * that are as good within a hundredth, the one whose rates are neither too bold nor too shy (slope of calibration 0.97).
 */
export const CHOSEN = { set: 'polymer, load, kind, kind by polymer, like', ridge: 1 } as const

/** Rate from which a mixture is said to separate; the rule mixture-may-separate warns from the same. */
export const CALLED_FROM = 0.8
