export { type ConductCourses, conductCourses, conductMaker } from './conduct-maker.ts';
