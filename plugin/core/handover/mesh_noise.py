"""How well the heights behind a mesh repeat: a file ``NAME.noise.json`` beside the mesh, which has no place for it.

It holds the name of the mesh, the SHA-256 of its bytes, and two standard deviations in metres: ``sigma_m``, new at
every point, and ``drift_m``, which points recorded within minutes share. Where the survey has times, ``time_s`` has
those of the nodes in their order, in seconds from ``first_s`` (s of the survey's own clock); null for a node that is no
point of the survey.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple, Union

import numpy as np

from ..alignment.noise import vertex_times
from ..files import replace_file
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..quality.repeatability import Repeatability
from ..surface.tin import Tin
from .checksums import digest

NOT_ITS_NOISE = Text(
    "mesh_noise.stale",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} does not belong to {mesh} as it is now, or cannot be read: what it says of noise is not used. Write "
        "the mesh anew, or say how well its heights repeat.",
    ),
    weight=2,
)
OWN_NOISE = Text(
    "mesh_noise.own",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is taken with the noise of its own survey, as {file} beside it holds it: {sigma:.0f} mm new at every "
        "point and {drift:.0f} mm of drift.",
    ),
)
_MOST = 100_000  # bytes, more than its mesh has
_LARGEST = 100.0  # metres


@dataclass(frozen=True)
class MeshNoise:
    """Standard deviations in metres: ``sigma``, new at every point, and ``drift``, shared within minutes.

    ``time``: (k,) seconds of the nodes of the mesh, nan for those that are no points; None where no time is known.
    """

    sigma: float
    drift: float
    time: Optional[np.ndarray] = None

    @property
    def total(self) -> float:
        """Standard deviation of one height, drift included."""
        return float(np.hypot(self.sigma, self.drift))

    def of_nodes(self, nodes: np.ndarray) -> MeshNoise:
        """That of a mesh of some (j,) of the nodes, by their numbers from 0 in the order of that mesh."""
        time = None if self.time is None else self.time[nodes]
        return replace(self, time=time if time is not None and np.isfinite(time).any() else None)


def node_times(tin: Tin, time: Optional[np.ndarray]) -> Optional[np.ndarray]:
    """Seconds (k,) of the nodes that the mesh file of ``tin`` has, from those (p,) of the points it was built from."""
    own = vertex_times(tin, time)
    nodes = None if own is None else own[np.unique(tin.triangles)]
    return nodes if nodes is not None and np.isfinite(nodes).any() else None


def noise_of(found: Optional[Repeatability]) -> Optional[MeshNoise]:
    """What ``found`` says of the points; None where it tells nothing."""
    if found is None or not (np.isfinite(found.total) and found.total > 0):
        return None
    drift = float(found.drift) if np.isfinite(found.drift) else 0.0
    return MeshNoise(float(np.sqrt(max(0.0, found.total**2 - drift**2))), drift)


def noise_file(mesh: Union[str, Path]) -> Path:
    return Path(mesh).with_suffix(".noise.json")


def write_mesh_noise(mesh: Union[str, Path], noise: Optional[MeshNoise]) -> Optional[Path]:
    """Write the file beside the ``mesh``, which is written already; remove a stale one where nothing is known.

    Returns the file written, or None. Raises SurveyError when it cannot be written.
    """
    target = noise_file(mesh)
    if noise is None:
        target.unlink(missing_ok=True)
        return None
    told: Dict[str, Any] = {
        "mesh": Path(mesh).name,
        "sha256": digest(mesh).sha256,
        "sigma_m": round(noise.sigma, 9),
        "drift_m": round(noise.drift, 9),
    }
    text = json.dumps(told, indent=1)
    if noise.time is not None:
        first = float(np.nanmin(noise.time))
        since = [None if one != one else one for one in np.round(noise.time - first, 3).tolist()]
        text = f'{text[:-2]},\n "first_s": {first!r},\n "time_s": {json.dumps(since)}\n}}'
    with replace_file(target) as temporary:
        Path(temporary).write_text(text + "\n", encoding="utf-8")
    return target


def read_mesh_noise(mesh: Union[str, Path]) -> Tuple[Optional[MeshNoise], Tuple[Message, ...]]:
    """What the file beside the ``mesh`` says, None where there is none; and what is to be told of it."""
    target = noise_file(mesh)
    if not target.is_file():
        return None, ()
    try:
        if target.stat().st_size > _MOST + Path(mesh).stat().st_size:
            raise ValueError
        told = json.loads(target.read_text(encoding="utf-8"))
        noise = MeshNoise(
            float(told["sigma_m"]), float(told["drift_m"]), _times(told.get("time_s"), told.get("first_s"))
        )
        if told["sha256"] != digest(mesh).sha256 or not all(0 <= one <= _LARGEST for one in (noise.sigma, noise.drift)):
            raise ValueError
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return None, (message(NOT_ITS_NOISE, file=target.name, mesh=Path(mesh).name),)
    return noise, ()


def _times(told: Optional[List[Optional[float]]], first: Optional[float]) -> Optional[np.ndarray]:
    if told is None or first is None:
        return None
    time = np.asarray(told, float) + float(first)
    if time.ndim != 1 or np.isinf(time).any() or not np.isfinite(time).any():
        raise ValueError
    return time
