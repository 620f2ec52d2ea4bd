"""Families of walked surveys that show what a check does to real ground, drawn at random from a seed.

What they hold, so that nobody reads more into the bars than was tried; names as in :data:`FAMILIES`:

- ``street``: no field codes; kerb feet and tops on both sides and the bottom of a ditch (0.3 to 0.9 m deep, sides
  1:1.2 to 1:2.5) are walked along and crossed; straight or of 60 to 600 m radius, up to three kerbs lowered. Two
  thirds are walked across at every pass, the others along with a few cross passes; three in ten lack some lines.
- ``heaps``: two to four heaps and pits of 50 to 500 m³ (frustums, 1:1.4 to 1:2.6), three passes or more over each.
- ``beds``, ``walls``, ``boulders``, ``terraces``, ``rough``, ``field``: raised beds and boulders that two passes see,
  low walls walked on top and at the foot and single steps, terraces, rubble and ploughed land, a field with nothing.
- ``coded``: the street with kerbs and ditch coded as lines, a point each 2 to 4 m or as close as the walk's.
- ``multipath``: street or field, heights wander up to 2.5 times as much as elsewhere.
- ``tilt``: street or field, a rover that compensates tilt, 5 to 45 degrees; heights right, noise and stated sigma a
  little larger.
- ``vehicle``: 5 m/s, a point each 1 to 2 m.
- With faults: ``…-faults`` (lifts of 1 to 30 points, tilt, fix lost and regained wrongly, pole height for a stretch, as
  in survey_simulator), ``mixed`` (any of six sites) and ``mixed-bare`` (no column of the receiver at all),
  ``coded-lifts`` (on the coded lines too), ``tilt-lifts``, ``tilt-wrong`` (leaning without compensation in stretches or
  all the way).
- ``levels``, ``vehicle-changed``: heights of another level, 0.1 to 2 m (0.1 to 0.6 m), for the rest of the file or for
  long; at least 10 crossings join the parts and each has 15 % of the points; with a stop or without; a quarter of
  ``levels`` shifts the places by 5 to 15 cm too.
- ``strays``: one to five lines of the file at zero, with easting and northing swapped, or 300 m to 1,000 km away.

In all of them: spacing 0.45 to 0.75 m (vehicle 1 to 2), passes 2 to 4.5 m apart (beds 1.6 to 3, boulders 1.2 to 2.2,
heaps as near as they need), about 700 to 3,500 points, white noise 7 to 18 mm, a slow part of 0.3 to 0.7 of it (half of
the surveys first-order Gauss-Markov of 60 to 150 s, half sums of five waves of periods of 1 to 3 minutes), plan noise
of half the height's, stated sigma wrong by up to a third. An eighth each has no time, no sigma, no tilt. A fault that
must be found is off by 4 standard deviations of a height, on rough ground those of clods and stones with it.

Not in it: buildings, trees and other holes in the walk; tall grass (heights that are off to one side); banks too steep
to walk; kerbs at corners and crossings; faults of a vehicle other than its antenna's height; standing still and
repeated lines (survey_simulator has them); several files; changes of level that drift or are smaller than 0.1 m;
two changes of level that are not one stretch; strays closer than 300 m, lines without numbers.
"""

from __future__ import annotations

import zlib

import numpy as np

from .families import FAMILIES
from .receiver import FieldRecord
from .survey import Level, Line, Mound, Survey

__all__ = ["FAMILIES", "Level", "Line", "Mound", "Survey", "simulate"]


def simulate(family: str, seed: int) -> Survey:
    """The survey of a family and a seed; everything in it is drawn from these two alone."""
    kind = FAMILIES[family]
    random = np.random.default_rng([zlib.crc32(family.encode()), seed])
    record = FieldRecord(kind.site(random), random, kind.multipath)
    record.bare = kind.bare
    kind.spoil(record)
    return record.survey(family)
