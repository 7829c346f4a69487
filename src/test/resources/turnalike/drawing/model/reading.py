"""Reads bodies with programs that are not ours and prints a line for each file: STL with admesh, 3MF with lib3MF, the 3MF Consortium's own
library. Volumes are summed here in double precision over the numbers as they stand in the file; admesh's own sum is in single precision."""
import ctypes
import re
import struct
import subprocess
import sys


def volume(corners, facets):
    sum = 0.0
    for i in range(0, len(facets), 3):
        a, b, c = (corners[3 * k : 3 * k + 3] for k in facets[i : i + 3])
        sum += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
    return sum / 6


def stl(path):
    told = subprocess.run(["admesh", path], capture_output=True, text=True, check=True).stdout

    def figure(pattern):
        return re.search(pattern + r"\s*:\s*(-?[\d.]+)", told).group(1)

    faults = [
        "Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed",
        "Backwards edges", "Normals fixed",
    ]  # fmt: skip
    with open(path, "rb") as file:
        data = file.read()
    (count,) = struct.unpack_from("<I", data, 80)
    assert len(data) == 84 + 50 * count and int(figure("Number of facets")) == count
    corners = []
    for i in range(count):
        corners += struct.unpack_from("<9f", data, 84 + 50 * i + 12)
    print("stl", sum(int(figure(each)) for each in faults), figure("Volume"), volume(corners, range(3 * count)))


def threemf(path):
    lib = ctypes.CDLL("lib3MF.so.1")
    pointer, number, flag = ctypes.c_void_p, ctypes.c_uint32, ctypes.c_bool

    def ask(name, *arguments):
        code = getattr(lib, "lib3mf_" + name)(*arguments)
        assert code == 0, (name, hex(code & 0xFFFFFFFF))

    def given(kind, name, *arguments):
        out = kind()
        ask(name, *arguments, ctypes.byref(out))
        return out

    model = given(pointer, "createmodel")
    reader = given(pointer, "model_queryreader", model, b"3mf")
    ask("reader_setstrictmodeactive", reader, True)
    ask("reader_readfromfileutf8", reader, path.encode())
    objects = given(pointer, "model_getmeshobjects", model)
    meshes = []
    while given(flag, "resourceiterator_movenext", objects).value:
        meshes.append(given(pointer, "resourceiterator_getcurrent", objects))
    (mesh,) = meshes
    needed = number()
    name = ctypes.create_string_buffer(500)
    ask("object_getnameutf8", mesh, name, 500, ctypes.byref(needed))
    corners = (ctypes.c_float * (3 * given(number, "meshobject_getvertexcount", mesh).value))()
    ask("meshobject_getvertices", mesh, corners, len(corners) // 3, ctypes.byref(needed))
    facets = (number * (3 * given(number, "meshobject_gettrianglecount", mesh).value))()
    ask("meshobject_gettriangleindices", mesh, facets, len(facets) // 3, ctypes.byref(needed))
    print(
        "3mf",
        given(number, "reader_getwarningcount", reader).value,
        # 1 is the millimetre in the library's list of units.
        given(number, "model_getunit", model).value,
        int(given(flag, "meshobject_ismanifoldandoriented", mesh).value),
        volume(list(corners), list(facets)),
        name.value.decode(),
    )


for each in sys.argv[1:]:
    (stl if each.endswith(".stl") else threemf)(each)
