# Where an installed Matwright keeps its parts, and what its Debian package says of itself.

set(matwright_share ${CMAKE_INSTALL_DATADIR}/matwright)
set(matwright_doc ${CMAKE_INSTALL_DATADIR}/doc/matwright)

foreach(program matwright matwright-cli)
  if(TARGET ${program})
    install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
  endif()
endforeach()
foreach(folder positions catalogue screening demo)
  install(DIRECTORY resources/${folder} DESTINATION ${matwright_share} FILES_MATCHING PATTERN "*.json")
endforeach()

# Manual pages carry the version; they and the list of changes are packed as Debian wants them, without a time stamp.
function(matwright_install_packed source name destination)
  set(packed ${CMAKE_BINARY_DIR}/packed/${name}.gz)
  configure_file(${source} ${CMAKE_BINARY_DIR}/packed/${name} @ONLY)
  add_custom_command(OUTPUT ${packed} COMMAND gzip -9nkf ${CMAKE_BINARY_DIR}/packed/${name}
                     DEPENDS ${CMAKE_BINARY_DIR}/packed/${name} VERBATIM)
  string(MAKE_C_IDENTIFIER matwright_packed_${name} target)
  add_custom_target(${target} ALL DEPENDS ${packed})
  install(FILES ${packed} DESTINATION ${destination})
endfunction()

matwright_install_packed(packaging/debian/changelog changelog ${matwright_doc})
install(FILES packaging/debian/copyright DESTINATION ${matwright_doc})
if(TARGET matwright-cli)
  matwright_install_packed(packaging/man/matwright-cli.1.in matwright-cli.1 ${CMAKE_INSTALL_MANDIR}/man1)
endif()
if(TARGET matwright)
  matwright_install_packed(packaging/man/matwright.1.in matwright.1 ${CMAKE_INSTALL_MANDIR}/man1)
  install(FILES packaging/desktop/matwright.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
  install(FILES packaging/desktop/matwright.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
  install(FILES resources/icons/matwright.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
endif()

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME matwright)
set(CPACK_PACKAGE_VENDOR "The Matwright contributors")
set(CPACK_PACKAGE_CONTACT "The Matwright contributors <contributors@matwright.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "composes, screens and prints classes on the mat")
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
                                                WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION education)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Matwright is for teachers of mat-based movement classes. A class is composed
on a timeline from a catalogue of movements; its length, its changes of
position and its cautions for the people on the mats are computed with every
change, and it is printed on one page to teach from.
.
Cautions are general guidance, not medical advice: the person's own clinician
decides, and where no caution is raised that does not mean a movement is safe.
.
The package also holds matwright-cli, which does the same without a window.")
include(CPack)
