"""Meshes kept in memory: read once while their file stays as it is."""

from __future__ import annotations

import threading

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.handover import recent_meshes
from plugin.core.handover.mesh import read_2dm, write_2dm
from plugin.core.handover.recent_meshes import forget_meshes, recent_2dm
from plugin.core.messages import SurveyError
from tests.core.surfaces import random_tin


@pytest.fixture(autouse=True)
def parsed(monkeypatch):
    """Names of the files that were parsed."""
    forget_meshes()
    names = []
    parse = recent_meshes.parse_2dm
    monkeypatch.setattr(
        recent_meshes, "parse_2dm", lambda content, path, crs: names.append(path.name) or parse(content, path, crs)
    )
    yield names
    forget_meshes()


def test_ten_tools_read_a_mesh_once(tmp_path, parsed):
    path = tmp_path / "surface.2dm"
    write_2dm(random_tin(500, 1), path)
    first = recent_2dm(path)
    for _ in range(9):
        again = recent_2dm(path)
        assert again.triangles is first.triangles
    assert parsed == ["surface.2dm"]
    theirs = read_2dm(path)
    for name, value in vars(theirs).items():
        np.testing.assert_array_equal(getattr(first, name), value)


def test_a_file_that_has_changed_is_read_anew_whatever_its_date_says(tmp_path, parsed):
    import os

    path = tmp_path / "surface.2dm"
    for seed in range(3):
        tin = random_tin(50, seed)
        write_2dm(tin, path)
        os.utime(path, (10**9, 10**9))
        np.testing.assert_allclose(recent_2dm(path).vertices[:, 2], tin.vertices[:, 2], atol=1e-6)
    assert len(parsed) == 3
    copy = tmp_path / "copy.2dm"
    copy.write_bytes(path.read_bytes())
    recent_2dm(copy)
    assert len(parsed) == 3


def test_the_crs_is_that_asked_for_and_units_are_minded(tmp_path, parsed):
    path = tmp_path / "surface.2dm"
    write_2dm(random_tin(50, 1), path)
    metres, feet = CRS("EPSG:25832"), CRS("EPSG:2229")
    assert recent_2dm(path).crs is None
    assert recent_2dm(path, metres).crs == metres
    assert len(parsed) == 1
    in_feet = recent_2dm(path, feet)
    assert in_feet.crs == feet
    assert len(parsed) == 2
    np.testing.assert_array_equal(in_feet.vertices, read_2dm(path, feet).vertices)
    assert recent_2dm(path, metres).plan_area > 10 * in_feet.plan_area


def test_a_kept_surface_cannot_be_written_to(tmp_path):
    path = tmp_path / "surface.2dm"
    write_2dm(random_tin(50, 1), path)
    with pytest.raises(ValueError, match="read-only"):
        recent_2dm(path).vertices[0, 2] = 1.0


def test_memory_is_bounded(tmp_path, parsed, monkeypatch):
    paths = [tmp_path / f"{seed}.2dm" for seed in range(4)]
    for seed, path in enumerate(paths):
        write_2dm(random_tin(300, seed), path)
    one = sum(array.nbytes for array in recent_meshes._arrays(recent_2dm(paths[0])))
    monkeypatch.setattr(recent_meshes, "MOST_BYTES", int(2.5 * one))
    for path in paths[1:3]:
        recent_2dm(path)  # 0 goes
    recent_2dm(paths[1])
    recent_2dm(paths[3])  # 2 goes, asked for longest ago
    assert parsed == ["0.2dm", "1.2dm", "2.2dm", "3.2dm"]
    recent_2dm(paths[1])
    recent_2dm(paths[2])
    assert parsed[4:] == ["2.2dm"]
    monkeypatch.setattr(recent_meshes, "MOST_BYTES", one // 2)
    forget_meshes()
    recent_2dm(paths[0])
    recent_2dm(paths[0])
    assert parsed[5:] == ["0.2dm", "0.2dm"]


def test_what_cannot_be_read_is_refused_every_time(tmp_path):
    path = tmp_path / "surface.2dm"
    for _ in range(2):
        with pytest.raises(SurveyError):
            recent_2dm(path)
    path.write_text("MESH2D\nND 1 0 0 0\nE3T 1 1 2 3 1\n")
    for _ in range(2):
        with pytest.raises(SurveyError):
            recent_2dm(path)


def test_several_threads_may_ask_at_once(tmp_path):
    paths = [tmp_path / f"{seed}.2dm" for seed in range(3)]
    tins = [random_tin(200, seed) for seed in range(3)]
    for tin, path in zip(tins, paths):
        write_2dm(tin, path)
    wrong = []

    def ask(k):
        for i in range(20):
            found = recent_2dm(paths[(i + k) % 3])
            if len(found.triangles) != len(tins[(i + k) % 3].triangles):
                wrong.append(i)

    threads = [threading.Thread(target=ask, args=(k,)) for k in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert wrong == []
