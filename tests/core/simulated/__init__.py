"""Families of walked surveys that show what a check does to real ground, drawn at random from a seed."""

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
