"""Meshes that were read lately, kept in memory: tools that follow each other read a mesh file once.

What is kept is known by the file's content, not by its name or date: a file that has changed is read anew, and a
copy of one is not. Kept surfaces can't be written to.
"""

from __future__ import annotations

import hashlib
from collections import OrderedDict
from dataclasses import replace
from pathlib import Path
from threading import Lock
from typing import Any, Optional, Tuple

import numpy as np

from ..files import PathLike
from ..georeference.crs import height_unit, plan_unit
from ..surface.tin import Tin
from .mesh import parse_2dm
from .mesh_records import content_of

#: All kept surfaces together take up to so many bytes of memory; one of 1,000,000 points takes about 110 million.
MOST_BYTES = 600_000_000

_Key = Tuple[bytes, float, float]
_kept: OrderedDict[_Key, Tin] = OrderedDict()  # the one asked for last at the end
_lock = Lock()


def recent_2dm(path: PathLike, crs: Optional[Any] = None) -> Tin:
    """As :func:`.mesh.read_2dm`, but a mesh read lately is not read again. Its arrays are not to be written to."""
    content = content_of(Path(path))
    key = (hashlib.sha256(content).digest(), plan_unit(crs).metres, height_unit(crs).metres)
    with _lock:
        tin = _kept.get(key)
        if tin is not None:
            _kept.move_to_end(key)
    if tin is None:
        tin = parse_2dm(content, path, crs)
        for array in _arrays(tin):
            array.flags.writeable = False
        _keep(key, tin)
    return replace(tin, crs=crs)


def forget_meshes() -> None:
    """Let all kept surfaces go."""
    with _lock:
        _kept.clear()


def _keep(key: _Key, tin: Tin) -> None:
    with _lock:
        _kept[key] = replace(tin, crs=None)
        while sum(array.nbytes for each in _kept.values() for array in _arrays(each)) > MOST_BYTES:
            _kept.popitem(last=False)


def _arrays(tin: Tin) -> Tuple[np.ndarray, ...]:
    return tuple(value for value in vars(tin).values() if isinstance(value, np.ndarray))
