// Unrolls one disk (OFF file) by as-rigid-as-possible parametrisation, CGAL, and writes ms, then u and v per vertex.
#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Surface_mesh_parameterization/ARAP_parameterizer_3.h>
#include <CGAL/Surface_mesh_parameterization/Error_code.h>
#include <CGAL/Surface_mesh_parameterization/parameterize.h>
#include <CGAL/version.h>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>

using Kernel = CGAL::Simple_cartesian<double>;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
namespace SMP = CGAL::Surface_mesh_parameterization;

int main(int argc, char** argv) {
  if (argc != 3) return 2;
  Mesh mesh;
  std::ifstream in(argv[1]);
  if (!(in >> mesh)) return 3;
  const auto border = CGAL::Polygon_mesh_processing::longest_border(mesh).first;
  auto uv = mesh.add_property_map<Mesh::Vertex_index, Kernel::Point_2>("v:uv").first;
  const auto start = std::chrono::steady_clock::now();
  // The third number weighs rigidity against similarity: 0 would be as similar as possible, 1000 is CGAL’s usual.
  using Arap = SMP::ARAP_parameterizer_3<Mesh>;
  Arap arap(Arap::Border_parameterizer(), Arap::Solver_traits(), 1000, std::atoi(argv[2]), 1e-9);
  const auto error = SMP::parameterize(mesh, arap, border, uv);
  const std::chrono::duration<double, std::milli> ms = std::chrono::steady_clock::now() - start;
  if (error != SMP::OK) return 4;
  std::printf("%s %.3f\n", CGAL_VERSION_STR, ms.count());
  for (const auto v : mesh.vertices()) std::printf("%.17g %.17g\n", uv[v].x(), uv[v].y());
}
